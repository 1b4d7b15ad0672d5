package lungfish.desk;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * The text of a list from a file, and how it was written there.
 *
 * @param encoding for people: "UTF-8"
 */
public record ListText(String text, String encoding) {
    private static final Charset WESTERN = Charset.forName("windows-1252");
    private static final int BOM = 0xFEFF;

    /** A mark at the beginning tells; else it is UTF-8 where it can be, and what older spreadsheets write where it cannot. */
    public static ListText of(byte[] bytes) {
        if (begins(bytes, 0xFF, 0xFE)) {
            return read(bytes, StandardCharsets.UTF_16LE, "UTF-16");
        }
        if (begins(bytes, 0xFE, 0xFF)) {
            return read(bytes, StandardCharsets.UTF_16BE, "UTF-16");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return new ListText(unmarked(text), "UTF-8");
        } catch (CharacterCodingException e) {
            return read(bytes, WESTERN, "Windows-1252"); // every byte is a letter there
        }
    }

    private static ListText read(byte[] bytes, Charset charset, String encoding) {
        return new ListText(unmarked(new String(bytes, charset)), encoding);
    }

    private static boolean begins(byte[] bytes, int first, int second) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private static String unmarked(String text) {
        return !text.isEmpty() && text.charAt(0) == BOM ? text.substring(1) : text;
    }
}
