package lungfish.json;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Bytes to text, strictly: JSON is UTF-8 without a byte order mark (RFC 8259 §8.1). */
final class Utf8 {
    private static final String EXPECTED = "UTF-8 text without a byte order mark";
    private static final char MARK = '\uFEFF';

    private Utf8() {}

    /** The text; empty where the bytes are no UTF-8. A byte order mark is told and left out. */
    static Optional<String> decode(byte[] bytes, Problems problems) {
        if (looksLikeUtf16(bytes)) {
            problems.add(Place.ROOT, "the bytes look like UTF-16 or UTF-32", EXPECTED);
            return Optional.empty();
        }
        Optional<String> text = strictly(bytes, problems);
        if (text.isPresent() && text.get().indexOf(MARK) == 0) {
            problems.add(Place.ROOT, "the file begins with a byte order mark", EXPECTED);
            return text.map(marked -> marked.substring(1));
        }
        return text;
    }

    private static Optional<String> strictly(byte[] bytes, Problems problems) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(in)
                    .toString());
        } catch (CharacterCodingException e) {
            problems.add(Place.ROOT, "byte " + in.position() + " (counted from 0) is not UTF-8", EXPECTED);
            return Optional.empty();
        }
    }

    /** A UTF-16 mark, or a zero byte among the first four: no JSON text in UTF-8 begins so. */
    private static boolean looksLikeUtf16(byte[] bytes) {
        int first = unsigned(bytes, 0);
        int second = unsigned(bytes, 1);
        boolean marked = (first == 0xFE && second == 0xFF) || (first == 0xFF && second == 0xFE);
        boolean zero = first == 0 || second == 0 || unsigned(bytes, 2) == 0 || unsigned(bytes, 3) == 0;
        return marked || zero;
    }

    private static int unsigned(byte[] bytes, int index) {
        return index < bytes.length ? bytes[index] & 0xFF : ' ';
    }
}
