package lungfish.report;

import java.util.ArrayList;
import java.util.List;

/** A page of text: headings, paragraphs that wrap, labels with text hung beside them, tables. */
public final class Page {
    private static final int WIDTH = 96;
    private static final String INDENT = "  ";

    private final List<String> lines = new ArrayList<>();

    /** A heading, with a blank line before it unless it is the first. */
    public Page heading(String text) {
        if (!lines.isEmpty()) {
            lines.add("");
        }
        lines.add(text);
        return this;
    }

    public Page paragraph(String text) {
        return hung("", text);
    }

    /** Text beside a label; its further lines begin below its first word. */
    public Page hung(String label, String text) {
        int room = Math.max(20, WIDTH - label.length());
        String before = label;
        for (String line : wrapped(text, room)) {
            lines.add((before + line).stripTrailing());
            before = " ".repeat(label.length());
        }
        return this;
    }

    /** A text with a mark before it, indented. */
    public Page item(String mark, String text) {
        return hung(INDENT + mark + " ", text);
    }

    /** A table, indented. */
    public Page table(Table table) {
        table.lines().forEach(line -> lines.add(INDENT + line));
        return this;
    }

    private static List<String> wrapped(String text, int room) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > room) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** The whole text; every line ends with a line feed, on every system. */
    public String text() {
        return lines.isEmpty() ? "" : String.join("\n", lines) + "\n";
    }
}
