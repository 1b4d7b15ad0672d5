package lungfish.drawing;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import lungfish.plan.DemoPlans;
import lungfish.plan.Plan;

/** Draws the pictures in docs/pictures anew: run its {@code main} in the project's folder. */
public final class DocsPictures {
    private static final int WIDE = 1600;
    private static final int HIGH = 1000;

    private DocsPictures() {}

    public static void main(String[] args) throws IOException {
        for (String name : DemoPlans.names().toList()) {
            Plan plan = DemoPlans.plan(name);
            RoomScene scene = RoomScene.of(plan, Shown.AS_IT_SHOULD_BE_SET);
            Look look = Look.light(plan.room().displayUnits());
            save(name, Pictures.room(scene, WIDE, HIGH, look));
            if (name.equals("basement-rainbows")) {
                save(name + "-dark", Pictures.room(scene, WIDE, HIGH, look.with(Palette.DARK)));
                RackScene rack =
                        RackScene.of(scene, plan.room().racks().get(0).id()).orElseThrow();
                save(name + "-rack-a", Pictures.rack(rack, 900, HIGH, look));
            }
        }
    }

    private static void save(String name, BufferedImage image) throws IOException {
        ImageIO.write(image, "png", Path.of("docs", "pictures", name + ".png").toFile());
    }
}
