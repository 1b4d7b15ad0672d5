package lungfish.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class JsonReaderTest {
    private enum Colour {
        DARK_BLUE,
        RED
    }

    private record Cup(String name, double depthM, OptionalDouble widthM) {}

    private static Cup cup(Fields fields) {
        return new Cup(
                fields.text("name"),
                fields.number("depth_m", Range.POSITIVE),
                fields.maybeNumber("width_m", Range.POSITIVE));
    }

    private static Reading<List<Cup>> cups(String text) {
        return JsonReader.read(text, at -> at.list(each -> each.object(JsonReaderTest::cup)));
    }

    private static List<Problem> problemsOfBytes(byte[] bytes) {
        return JsonReader.read(bytes, At::isThere).problems();
    }

    @Test
    void aGoodTextIsReadAsItStands() {
        assertThat(cups("[{\"name\": \"tall\", \"depth_m\": 0.25}]").orThrow())
                .containsExactly(new Cup("tall", 0.25, OptionalDouble.empty()));
    }

    @Test
    void everyProblemIsToldInOneReading() {
        String text =
                """
                [{"name": 3, "depth_m": -1, "width_m": "wide"},
                 {"name": "x", "name": "y", "dept_m": 1},
                 7]""";
        assertThat(cups(text).problems())
                .extracting(Problem::path)
                .containsExactly("/0/name", "/0/depth_m", "/0/width_m", "/1/name", "/1/depth_m", "/1/dept_m", "/2");
    }

    @Test
    void aProblemSaysWhereWhatAndWhatMayStandThere() {
        assertThat(cups("[{\"name\": \"x\", \"depth_m\": 0}]").problems())
                .containsExactly(new Problem("/0/depth_m", "found 0", "a number above 0"));
    }

    @Test
    void anUnknownKeyIsMetWithTheNearestKnownOne() {
        Problem problem = cups("[{\"name\": \"x\", \"depth_m\": 1, \"widht_m\": 1}]")
                .problems()
                .get(0);
        assertThat(problem.path()).isEqualTo("/0/widht_m");
        assertThat(problem.expected()).isEqualTo("\"width_m\" (did you mean that?), or one of name, depth_m, width_m");
    }

    @Test
    void aKeyThatStandsThreeTimesIsToldOnce() {
        assertThat(cups("[{\"name\": \"x\", \"name\": \"x\", \"name\": \"x\", \"depth_m\": 1}]")
                        .problems())
                .extracting(Problem::path)
                .containsExactly("/0/name");
    }

    @Test
    void aMissingObjectIsOneProblemAndNotOneForEachOfItsKeys() {
        assertThat(JsonReader.read("{}", at -> at.object(fields -> fields.object("cup", JsonReaderTest::cup)))
                        .problems())
                .extracting(Problem::path)
                .containsExactly("/cup");
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "1e999"})
    void whatIsNoFiniteNumberIsToldAtItsPlace(String written) {
        assertThat(cups("[{\"name\": \"x\", \"depth_m\": " + written + "}]").problems())
                .containsExactly(new Problem("/0/depth_m", "found " + written, "a number above 0"));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
        2,    2
        2.0,  2
        20e-1, 2
        """)
    void aWholeNumberMayBeWrittenInAnyWay(String written, int value) {
        assertThat(JsonReader.read(written, at -> at.whole(0, 9)).orThrow()).isEqualTo(value);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2.5", "10", "-1", "1e999999999", "\"2\"", "NaN"})
    void whatIsNoWholeNumberInRangeIsRefused(String written) {
        assertThat(JsonReader.read(written, at -> at.whole(0, 9)).problems()).hasSize(1);
    }

    @Test
    void constantsAreWrittenInSnakeCase() {
        assertThat(JsonReader.read("\"dark_blue\"", at -> at.word(Colour.class)).orThrow())
                .isEqualTo(Colour.DARK_BLUE);
        assertThat(JsonReader.read("\"DARK_BLUE\"", at -> at.word(Colour.class)).problems())
                .containsExactly(new Problem("", "found \"DARK_BLUE\"", "one of dark_blue, red"));
    }

    @Test
    void oneOfSeveralShapesIsChosenByItsTag() {
        var shapes = Map.<String, java.util.function.Function<Fields, Double>>of(
                "square", f -> f.number("side_m", Range.POSITIVE),
                "circle", f -> f.number("bore_m", Range.POSITIVE));
        assertThat(JsonReader.read(
                                "{\"kind\": \"circle\", \"bore_m\": 2}",
                                at -> at.object(f -> f.oneOf("kind", shapes, 0.0)))
                        .orThrow())
                .isEqualTo(2.0);
        assertThat(JsonReader.read(
                                "{\"kind\": \"circel\", \"bore_m\": 2}",
                                at -> at.object(f -> f.oneOf("kind", shapes, 0.0)))
                        .problems())
                .extracting(Problem::path, Problem::found)
                .containsExactly(tuple("/kind", "found \"circel\""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"a b\"", "\"\"", "\"-a\"", "\"ä\"", "\"a/b\"", "7"})
    void anIdHoldsNoBlanksAndNoSlashes(String written) {
        assertThat(JsonReader.read(written, At::id).problems()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"\\u001b[31m\"", "\"two\\nlines\"", "\"\\ud800\"", "\"  \""})
    void aNameHoldsNoControlCharactersAndNoHalfLetters(String written) {
        assertThat(JsonReader.read(written, At::text).problems()).hasSize(1);
    }

    @Test
    void pointersEscapeSlashAndTilde() { // RFC 6901, section 3
        assertThat(Place.ROOT.key("a/b").key("m~n").item(3).pointer()).isEqualTo("/a~1b/m~0n/3");
    }

    @Test
    void brokenJsonIsToldWithLineAndColumn() {
        Problem problem = cups("[\n  {\"name\": \"x\",\n   \"depth_m\": 1,}\n]")
                .problems()
                .get(0);
        assertThat(problem.path()).isEqualTo("/0");
        assertThat(problem.found()).contains("line 3, column 17");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "[{\"name\"", "[{\"name\": \"x", "[{\"name\": \"x\", \"depth_m\": 1", "[{}"})
    void aCutFileIsToldToBeCut(String text) {
        assertThat(cups(text).problems()).singleElement().satisfies(problem -> assertThat(problem.found())
                .startsWith("the file ends in the middle"));
    }

    @Test
    void nothingMayFollowTheEnd() {
        assertThat(cups("[] []").problems()).singleElement().satisfies(problem -> assertThat(problem.found())
                .startsWith("more text follows"));
    }

    @Test
    void anEmptyFileIsRefused() {
        assertThat(problemsOfBytes(new byte[0])).hasSize(1);
    }

    @Test
    void hostileNestingIsRefusedAndNotFollowed() {
        assertThat(cups("[".repeat(100_000)).problems())
                .singleElement()
                .satisfies(
                        problem -> assertThat(problem.found()).contains("nest").doesNotContain("`"));
    }

    @Test
    void aByteOrderMarkIsAProblemBesideTheOthers() {
        assertThat(problemsOfBytes("\uFEFF[]".getBytes(StandardCharsets.UTF_8)))
                .containsExactly(new Problem(
                        "", "the file begins with a byte order mark", "UTF-8 text without a byte order mark"));
    }

    @Test
    void otherEncodingsAreNamed() {
        assertThat(problemsOfBytes("[]".getBytes(StandardCharsets.UTF_16)))
                .extracting(Problem::found)
                .containsExactly("the bytes look like UTF-16 or UTF-32");
        assertThat(problemsOfBytes("[]".getBytes(StandardCharsets.UTF_16LE))).hasSize(1);
        assertThat(problemsOfBytes("[\"ä\"]".getBytes(StandardCharsets.ISO_8859_1)))
                .extracting(Problem::found)
                .containsExactly("byte 2 (counted from 0) is not UTF-8");
    }

    @Test
    void aFileOfTooManyBytesIsNotRead() {
        assertThat(problemsOfBytes(new byte[JsonReader.MOST_BYTES + 1]))
                .containsExactly(JsonReader.tooLarge(JsonReader.MOST_BYTES + 1));
    }
}
