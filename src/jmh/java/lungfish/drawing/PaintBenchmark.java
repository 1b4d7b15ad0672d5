package lungfish.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Painting club-hall into an image, beside the least that any painting costs: filling the image, and copying another. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PaintBenchmark {
    private static final double MARGIN_PX = 40;

    @Param({"1600x1000", "3840x2160"})
    String size = "1600x1000";

    private final Plan plan = DemoPlans.plan("club-hall");
    private final Look look = Look.light(plan.room().displayUnits());
    private final RoomScene scene = RoomScene.of(plan, Shown.AS_IT_SHOULD_BE_SET);
    private final KeptPicture kept = new KeptPicture();
    private final Marked oneRack =
            new Marked(Set.of(plan.room().racks().get(0).id().part()), Optional.empty());

    private BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
    private BufferedImage other = image;
    private Graphics2D g = image.createGraphics();
    private Rectangle2D frame = new Rectangle2D.Double();
    private Viewport view = new Viewport(1, 0, 0);

    /** Makes the canvas. */
    @Setup
    public void prepare() {
        int wide = Integer.parseInt(size.substring(0, size.indexOf('x')));
        int high = Integer.parseInt(size.substring(size.indexOf('x') + 1));
        image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        other = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
        g = image.createGraphics();
        g.setClip(0, 0, wide, high);
        frame = new Rectangle2D.Double(0, 0, wide, high);
        view = Viewport.fit(scene.boundsM(), Marks.outset(frame, -MARGIN_PX));
    }

    /** The least that any painting costs. */
    @Benchmark
    public BufferedImage filled() {
        fill(g);
        return image;
    }

    /** Another image brought over. */
    @Benchmark
    public BufferedImage copied() {
        g.drawImage(other, 0, 0, null);
        return image;
    }

    /** A new plan: a new scene, and all of it painted. */
    @Benchmark
    public BufferedImage first() {
        room(RoomScene.of(plan, Shown.AS_IT_SHOULD_BE_SET), g);
        return image;
    }

    /** Zoomed or panned: the scene is kept, all of it is painted. */
    @Benchmark
    public BufferedImage moved() {
        room(scene, g);
        return image;
    }

    /** Something else is pointed at or chosen: the picture is kept, the marks are painted. */
    @Benchmark
    public BufferedImage marked() {
        kept.paint(image.getWidth(), image.getHeight(), List.of(scene, view, look), on -> room(scene, on), g);
        RoomPainter.marks(scene, view, oneRack, look, g);
        return image;
    }

    /** The four pictures of the side panels, each in a quarter of the canvas. */
    @Benchmark
    public BufferedImage sides() {
        fill(g);
        double wide = frame.getWidth() / 2;
        double high = frame.getHeight() / 2;
        CurvePicture.paint(plan, new Rectangle2D.Double(0, 0, wide, high), look, g);
        HeadroomPicture.paint(plan, new Rectangle2D.Double(wide, 0, wide, high), look, g);
        NoisePicture.paint(plan, new Rectangle2D.Double(0, high, wide, high), look, g);
        BackupPicture.paint(plan, new Rectangle2D.Double(wide, high, wide, high), look, g);
        return image;
    }

    private void room(RoomScene that, Graphics2D on) {
        fill(on);
        RoomPainter.unmarked(that, view, frame, look, on);
    }

    private void fill(Graphics2D on) {
        on.setColor(look.palette().sheet());
        on.fillRect(0, 0, image.getWidth(), image.getHeight());
    }
}
