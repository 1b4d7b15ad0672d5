package lungfish.desktop;

import java.awt.Color;
import java.awt.Font;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.ListSelectionModel;
import lungfish.desk.Later;
import lungfish.drawing.GrowthLaid;
import lungfish.drawing.Look;
import lungfish.drawing.Palette;
import lungfish.drawing.Type;
import lungfish.edit.Part;
import lungfish.edit.Selection;
import lungfish.growth.HeadroomMap;
import lungfish.growth.Mapping;
import lungfish.growth.NewKind;
import lungfish.growth.RackFit;
import lungfish.growth.Stage;
import lungfish.growth.Stages;
import lungfish.growth.Staging;
import lungfish.plan.Planner;
import lungfish.report.GrowthWords;
import lungfish.room.RackId;
import lungfish.room.Room;

/**
 * Where more outlets fit along the pipe, laid over the room while the sheet is open; and the stages of the growing room: what
 * breaks first, and its cheapest mend.
 */
final class GrowthSheet extends SideSheet {
    private final Side side;
    private final transient Later<Wanted, Optional<HeadroomMap>> mapping;
    private final transient Later<Room, Optional<Stages>> staging;
    private final Stack stack = new Stack();
    private final NewKindFields kind;
    private final UnderWay underWay;
    private final Paragraph count;
    private final Paragraph where;
    private final Paragraph breaks;
    private final Paragraph rests;
    private final Paragraph foresight;
    private final DefaultListModel<Stage> stages = new DefaultListModel<>();
    private final JList<Stage> line = new JList<>(stages);
    private transient List<Stage> shown = List.of();
    private transient Optional<Told> told = Optional.empty();

    /** All that the map depends on. */
    private record Wanted(Room room, NewKind kind) {}

    /** All that is shown but the progress. */
    private record Told(
            Optional<Optional<HeadroomMap>> map,
            boolean isMapCurrent,
            boolean isCounting,
            Optional<Optional<Stages>> stages,
            boolean areStagesCurrent,
            Look look,
            int widthPx) {}

    GrowthSheet(View view, Side side) {
        super(view, side, "Room to grow");
        this.side = side;
        Planner planner = new Planner(view.desk().shared().catalogue());
        this.mapping =
                asking((asked, progress) -> Mapping.of(planner, asked.room(), asked.kind(), progress), this::tell);
        this.staging = asking((room, progress) -> Staging.of(planner, room, progress), this::tell);
        this.kind = new NewKindFields(view, this::contentPx, () -> map().map(HeadroomMap::newcomer), this::tell);
        this.underWay = new UnderWay(view, List.of(mapping, staging));
        add(underWay, "growx, hidemode 3");
        this.count = paragraph("growth-count", Type::headline, Palette::ink);
        this.where = paragraph("growth-where", Type::body, Palette::softInk);
        stack.add(kind, "growx, gaptop " + view.px(2));
        this.breaks = paragraph("growth-breaks", Type::headline, Palette::ink);
        this.rests = paragraph("growth-rests", Type::body, Palette::softInk);
        timeLine();
        this.foresight = paragraph("growth-foresight", Type::body, Palette::ink);
        add(Side.scrolling(stack), "grow, push, hmin 0");
        view.follow(this, this::tell);
    }

    @Override
    int widthPx() {
        return view().wideSidePx();
    }

    private Paragraph paragraph(String name, Function<Type, Font> type, Function<Palette, Color> ink) {
        Paragraph paragraph = new Paragraph(view(), type, ink, this::contentPx);
        paragraph.setName(name);
        stack.add(paragraph, "growx");
        return paragraph;
    }

    private void timeLine() {
        line.setName("stages");
        line.getAccessibleContext().setAccessibleName("Stages, now first");
        line.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        line.setCellRenderer(new StageCell(view(), this::contentPx, staging::isCurrent, this::fit));
        line.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                lead();
            }
        });
        Keys.bind(line, "ENTER", this::lead);
        stack.add(line, "growx");
    }

    private Optional<HeadroomMap> map() {
        return mapping.answer().flatMap(answer -> answer);
    }

    private Optional<RackFit> fit(RackId rack) {
        return map().stream()
                .flatMap(map -> map.racks().stream())
                .filter(fit -> fit.rack().equals(rack))
                .findFirst();
    }

    /** To the racks that come with the stage. */
    private void lead() {
        Stage stage = line.getSelectedValue();
        if (stage == null || stage.when().added().isEmpty()) {
            return;
        }
        side.lead(stage.when().added().get(0).part());
        view().select(Selection.of(stage.when().added().stream().map(Part::rack).collect(Collectors.toList())));
    }

    private void tell() {
        Room room = view().desk().room();
        mapping.ask(new Wanted(room, kind.kind()));
        staging.ask(room);
        underWay.tell();
        Told now = new Told(
                mapping.answer(),
                mapping.isCurrent(),
                mapping.answer().isEmpty() && mapping.isRunning(),
                staging.answer(),
                staging.isCurrent(),
                view().look(),
                contentPx());
        if (!told.equals(Optional.of(now))) { // progress alone measures no text again
            told = Optional.of(now);
            tellMap(now.isCounting());
            tellStages();
            view().grow(map().map(map -> new GrowthLaid(map, mapping.isCurrent())));
            stack.revalidate();
        }
        kind.tell();
        stack.repaint();
    }

    private void tellMap(boolean isCounting) {
        GrowthWords words = words();
        boolean isAsked = mapping.answer().isEmpty();
        count.setText(map().map(GrowthWords::count)
                .orElse(isCounting ? "Counting …" : isAsked ? "Not counted yet" : "Nothing to grow yet"));
        where.setText(map().map(words::where)
                .orElse(isAsked ? "" : "The room cannot be solved yet: see what must be mended first."));
        count.inked(ink(mapping.isCurrent()));
    }

    private void tellStages() {
        GrowthWords words = words();
        Optional<Stages> now = staging.answer().flatMap(answer -> answer);
        List<Stage> then = now.map(Stages::all).orElse(List.of());
        if (!then.equals(shown)) {
            shown = then;
            stages.clear();
            stages.addAll(then);
        }
        breaks.setText(now.map(GrowthWords::brief).orElse(""));
        breaks.inked(ink(staging.isCurrent()));
        rests.setText(now.map(all -> words.headline(all) + " " + GrowthWords.blower(all))
                .orElse(""));
        foresight.setText(now.flatMap(words::foresight).orElse(""));
        foresight.setVisible(!foresight.getText().isEmpty());
        line.setBackground(view().look().palette().sheet());
        line.setFixedCellHeight(1); // cells are as high as their text: the list forgets the heights it knew
        line.setFixedCellHeight(-1);
    }

    private GrowthWords words() {
        return new GrowthWords(view().quantities(), view().names());
    }

    private static Function<Palette, Color> ink(boolean isCurrent) {
        return isCurrent ? Palette::ink : Palette::free;
    }

    @Override
    void left() {
        super.left();
        view().grow(Optional.empty());
    }

    @Override
    void takeFocus() {
        kind.takeFocus();
    }
}
