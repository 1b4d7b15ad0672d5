package lungfish.validation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Writes docs/validation.md: every published value beside ours, fixed digits, the worst of each group on top. */
final class ValidationPage {
    private static final String HEAD =
            """
            # What others have published, and what we compute

            Written by the build (`ValidationTest` writes `target/validation.md` and compares it with this page). Each row is a test.
            *Used* is how much of the tolerance the difference takes up: 100 % would be just allowed.
            *Seen* says how the published value was read: on the printed page, in a companion or reproduction of it, or from memory.

            """;

    private final StringBuilder page = new StringBuilder(HEAD);

    private ValidationPage() {}

    static String of(List<CheckGroup> groups, List<NotComputed> others) {
        ValidationPage written = new ValidationPage();
        List<Section> sections = groups.stream()
                .map(each -> new Section(each, each.comparisons()))
                .toList();
        written.writeSummary(sections);
        sections.forEach(written::writeSection);
        written.writeOthers(others);
        return written.page.toString();
    }

    private record Section(CheckGroup group, List<Comparison> comparisons) {
        Comparison worst() {
            return comparisons.stream()
                    .max(Comparator.comparingDouble(Comparison::toleranceUsed))
                    .orElseThrow(() -> new IllegalStateException(group.file() + " has no rows"));
        }
    }

    private void writeSummary(List<Section> sections) {
        row("group", "values", "worst case", "published", "ours", "difference", "tolerance", "used");
        row("---", "---:", "---", "---:", "---:", "---:", "---:", "---:");
        for (Section each : sections) {
            Comparison worst = each.worst();
            List<String> cells = new ArrayList<>(List.of(
                    each.group.title(),
                    Integer.toString(each.comparisons.size()),
                    worst.row().id()));
            cells.addAll(figures(worst));
            row(cells.toArray(String[]::new));
        }
    }

    private void writeSection(Section section) {
        page.append("\n## ").append(section.group.title()).append("\n\n");
        page.append(section.group.note()).append("\n\n");
        List<String> notes = new ArrayList<>();
        row("id", "what", "given", "published", "ours", "difference", "tolerance", "used", "why, source, seen");
        row("---", "---", "---", "---:", "---:", "---:", "---:", "---:", "---");
        for (Comparison each : section.comparisons) {
            PublishedRow row = each.row();
            List<String> cells =
                    new ArrayList<>(List.of(row.id(), row.what(), row.inputs().text()));
            cells.addAll(figures(each));
            cells.add(reference(notes, "Tolerance: " + row.tolerance().why()) + " "
                    + reference(notes, "Source: " + row.source()) + " " + reference(notes, "Seen: " + row.status()));
            row(cells.toArray(String[]::new));
        }
        page.append('\n');
        for (int i = 0; i < notes.size(); i++) {
            page.append(i + 1).append(". ").append(notes.get(i)).append('\n');
        }
    }

    /** What is left, so that nobody looks for it in vain. */
    private void writeOthers(List<NotComputed> others) {
        page.append("\n## Held otherwise, or not at all\n\n");
        page.append(
                "Published values that we know of and that no figure of ours stands beside, each with the reason.\n\n");
        row("id", "what", "given", "published", "why", "source, seen");
        row("---", "---", "---", "---:", "---", "---");
        for (NotComputed each : others) {
            row(
                    each.id(),
                    each.what(),
                    each.inputs().text(),
                    each.printed() + " " + each.unit(),
                    each.why(),
                    each.source() + "; " + each.status());
        }
    }

    private static List<String> figures(Comparison each) {
        PublishedRow row = each.row();
        return List.of(
                (row.printed() + " " + row.unit()).strip(),
                significant(each.ours()),
                difference(row.published(), each.ours()),
                row.tolerance().text(row.unit()),
                String.format(Locale.ROOT, "%.0f %%", 100.0 * each.toleranceUsed()));
    }

    private static String reference(List<String> notes, String note) {
        if (!notes.contains(note)) {
            notes.add(note);
        }
        return Integer.toString(notes.indexOf(note) + 1);
    }

    private static String significant(double value) {
        return String.format(Locale.ROOT, "%.5g", value);
    }

    private static String difference(double published, double ours) {
        if (published == 0.0) {
            return significant(ours);
        }
        String text = String.format(Locale.ROOT, "%+.2f %%", 100.0 * (ours / published - 1.0));
        return text.equals("-0.00 %") ? "+0.00 %" : text;
    }

    private void row(String... cells) {
        page.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }
}
