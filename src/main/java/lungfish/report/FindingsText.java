package lungfish.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lungfish.reason.Assumption;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.reason.Severity;

/** Findings and assumptions as lists on a page: what must be mended first, cautions last. */
final class FindingsText {
    /** Of one kind; the rest are counted. */
    private static final int SHOWN = 3;

    private static final List<Severity> ORDER =
            List.of(Severity.BLOCKING, Severity.WARNING, Severity.NOTE, Severity.CAUTION);

    private final Sentences sentences;
    private final Page page;

    FindingsText(Sentences sentences, Page page) {
        this.sentences = sentences;
        this.page = page;
    }

    /** Every finding. */
    void all(List<Finding> findings) {
        for (Severity severity : ORDER) {
            list(findings, severity, Integer.MAX_VALUE);
        }
    }

    /** Of each kind the first few. */
    void some(List<Finding> findings, Severity... severities) {
        for (Severity severity : severities) {
            list(findings, severity, SHOWN);
        }
    }

    private void list(List<Finding> findings, Severity severity, int shown) {
        Map<Code, List<Finding>> kinds = new LinkedHashMap<>();
        findings.stream().filter(finding -> finding.severity() == severity).forEach(finding -> kinds.computeIfAbsent(
                        finding.code(), code -> new ArrayList<>())
                .add(finding));
        if (!kinds.isEmpty()) {
            page.heading(heading(severity));
        }
        kinds.values().forEach(kind -> items(mark(severity), kind, shown));
    }

    private static String heading(Severity severity) {
        return switch (severity) {
            case BLOCKING -> "Must be mended first";
            case WARNING -> "Worth mending";
            case NOTE -> "Good to know";
            case CAUTION -> "Cautions: local codes and licensed practice come first";
        };
    }

    private static String mark(Severity severity) {
        return switch (severity) {
            case BLOCKING -> "✕";
            case WARNING -> "▲";
            case NOTE -> "●";
            case CAUTION -> "!";
        };
    }

    private void items(String mark, List<Finding> kind, int shown) {
        kind.stream()
                .limit(shown)
                .forEach(finding -> page.item(mark, sentences.says(finding) + " " + sentences.mend(finding)));
        if (kind.size() > shown) {
            page.item(" ", "… and " + (kind.size() - shown) + " more of this kind; 'check' lists them all.");
        }
    }

    /** What the plan took because the room does not say it. */
    void assumptions(List<Assumption> assumptions) {
        if (!assumptions.isEmpty()) {
            page.heading("Assumed, because the room does not say it");
        }
        SharedAssumption.of(assumptions).forEach(shared -> page.item("·", sentences.says(shared)));
    }
}
