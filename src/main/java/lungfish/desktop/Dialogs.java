package lungfish.desktop;

import java.awt.Component;
import java.awt.print.Pageable;
import java.awt.print.PrinterJob;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.filechooser.FileNameExtensionFilter;
import lungfish.roomfile.RoomFiles;

/** Asks with dialogs over the window. */
final class Dialogs implements Asking {
    private static final String[] LISTS = {"csv", "tsv", "txt"};

    private final Component over;

    Dialogs(Component over) {
        this.over = over;
    }

    @Override
    public Optional<Path> toOpen() {
        JFileChooser chooser = chooser();
        boolean chosen = chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION;
        return chosen ? Optional.of(chooser.getSelectedFile().toPath()) : Optional.empty();
    }

    @Override
    public Optional<Path> toSave(String name) {
        JFileChooser chooser = chooser();
        chooser.setSelectedFile(new java.io.File(name));
        if (chooser.showSaveDialog(over) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        Path file = withEnding(chooser.getSelectedFile().toPath());
        return !Files.exists(file) || mayReplace(file) ? Optional.of(file) : Optional.empty();
    }

    @Override
    public Optional<Path> toOpenList() {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileFilter(new FileNameExtensionFilter("Lists of a spreadsheet (*.csv, *.tsv, *.txt)", LISTS));
        boolean chosen = chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION;
        return chosen ? Optional.of(chooser.getSelectedFile().toPath()) : Optional.empty();
    }

    @Override
    public Optional<Path> toSaveTable(String name) {
        return toSave(name, "Tables (*.csv)", "csv");
    }

    @Override
    public Optional<Path> toSavePdf(String name) {
        return toSave(name, "Pages (*.pdf)", "pdf")
                .map(file -> String.valueOf(file.getFileName()).endsWith(".pdf")
                        ? file
                        : file.resolveSibling(file.getFileName() + ".pdf"));
    }

    private Optional<Path> toSave(String name, String kind, String ending) {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileFilter(new FileNameExtensionFilter(kind, ending));
        chooser.setSelectedFile(new java.io.File(name));
        if (chooser.showSaveDialog(over) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        Path file = chooser.getSelectedFile().toPath();
        return !Files.exists(file) || mayReplace(file) ? Optional.of(file) : Optional.empty();
    }

    @Override
    public Optional<Path> toSaveAs(String name, Map<String, String> kinds) {
        JFileChooser chooser = new JFileChooser();
        chooser.setAcceptAllFileFilterUsed(false);
        kinds.forEach((ending, kind) -> chooser.addChoosableFileFilter(
                new FileNameExtensionFilter(kind + " (*" + ending + ")", ending.substring(1))));
        chooser.setFileFilter(chooser.getChoosableFileFilters()[0]);
        chooser.setSelectedFile(new java.io.File(name));
        if (chooser.showSaveDialog(over) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        String chosen = "." + ((FileNameExtensionFilter) chooser.getFileFilter()).getExtensions()[0];
        Path file = ended(chooser.getSelectedFile().toPath(), chosen, kinds);
        return !Files.exists(file) || mayReplace(file) ? Optional.of(file) : Optional.empty();
    }

    /** A name that has one of the endings keeps it; any other gets that of the kind that was chosen. */
    private static Path ended(Path file, String ending, Map<String, String> kinds) {
        String name = String.valueOf(file.getFileName());
        return kinds.keySet().stream().anyMatch(name.toLowerCase(Locale.ROOT)::endsWith)
                ? file
                : file.resolveSibling(name + ending);
    }

    @Override
    public Optional<Printing> toPrint(Pageable pages, String title) {
        PrinterJob job = PrinterJob.getPrinterJob();
        if (job.getPrintService() == null) {
            JOptionPane.showMessageDialog(
                    over,
                    "No printer is set up here. Save it as PDF, and print that elsewhere.",
                    "Print",
                    JOptionPane.INFORMATION_MESSAGE);
            return Optional.empty();
        }
        job.setJobName(title);
        job.setPageable(pages);
        return job.printDialog() ? Optional.of(job::print) : Optional.empty();
    }

    private static JFileChooser chooser() {
        JFileChooser chooser = new JFileChooser();
        chooser.setFileFilter(new FileNameExtensionFilter("Rooms (*" + RoomFiles.ENDING + ")", "json"));
        return chooser;
    }

    private static Path withEnding(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(".json") ? file : file.resolveSibling(name + RoomFiles.ENDING);
    }

    private boolean mayReplace(Path file) {
        String question = file.getFileName() + " is there already. Replace it?";
        return JOptionPane.showConfirmDialog(over, question, "Save as", JOptionPane.YES_NO_OPTION)
                == JOptionPane.YES_OPTION;
    }

    @Override
    public Unsaved unsaved(String name) {
        int chosen = choose(
                "\"" + name + "\" has changes that are not saved.", "Not saved", "Save", "Do not save", "Cancel");
        return switch (chosen) {
            case 0 -> Unsaved.SAVE;
            case 1 -> Unsaved.DROP;
            default -> Unsaved.STAY;
        };
    }

    @Override
    public Elsewhere changedElsewhere(String file) {
        int chosen = choose(
                "Another program has changed " + file + " since it was opened here.",
                "Changed by another program",
                "Save under another name",
                "Replace it",
                "Cancel");
        return switch (chosen) {
            case 0 -> Elsewhere.SAVE_AS;
            case 1 -> Elsewhere.REPLACE;
            default -> Elsewhere.STAY;
        };
    }

    /** Which of the choices, counted from 0; the first is offered. */
    private int choose(String told, String title, Object... choices) {
        return JOptionPane.showOptionDialog(
                over, told, title, JOptionPane.DEFAULT_OPTION, JOptionPane.QUESTION_MESSAGE, null, choices, choices[0]);
    }
}
