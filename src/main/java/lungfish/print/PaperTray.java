package lungfish.print;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;

/** Hands pages to a printer, each on its own paper, at its true size. */
public final class PaperTray implements Pageable {
    private final Printout printout;

    public PaperTray(Printout printout) {
        this.printout = printout;
    }

    @Override
    public int getNumberOfPages() {
        return printout.pages().size();
    }

    @Override
    public PageFormat getPageFormat(int page) {
        Paper paper = printout.pages().get(page).paper();
        java.awt.print.Paper sheet = new java.awt.print.Paper();
        sheet.setSize(paper.widthPt(), paper.heightPt());
        sheet.setImageableArea(
                paper.inside().getX(),
                paper.inside().getY(),
                paper.inside().getWidth(),
                paper.inside().getHeight());
        PageFormat format = new PageFormat();
        format.setPaper(sheet);
        return format;
    }

    @Override
    public Printable getPrintable(int page) {
        PrintedPage printed = printout.pages().get(page);
        return (Graphics g, PageFormat format, int index) -> {
            printed.paint((Graphics2D) g);
            return Printable.PAGE_EXISTS;
        };
    }
}
