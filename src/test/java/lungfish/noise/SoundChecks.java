package lungfish.noise;

import static lungfish.reason.Assumable.DOOR_REDUCTION;
import static lungfish.reason.Assumable.WALL_REDUCTION;

import java.util.stream.DoubleStream;
import lungfish.catalogue.BlowerClass.Level;
import lungfish.catalogue.CatalogueFiles;
import lungfish.noise.Walls.Plate;
import lungfish.validation.CheckGroup;
import lungfish.validation.Inputs;
import lungfish.validation.Measures;

/** How this package computes the published rows about sound. */
public final class SoundChecks {
    /** Any level: only differences are asked. */
    private static final double SOME_DB = 60;

    private static final double GLASS_M = 3.2e-3;

    private SoundChecks() {}

    /** Adding, distance, room, walls. */
    public static CheckGroup sound() {
        return CheckGroup.of(
                        "Sound",
                        "Levels by energy, spreading over a half sphere, direct and reverberant sound, reduction of walls.",
                        "sound.json")
                .by("adds", in -> sum(SOME_DB, SOME_DB - in.number("difference_dB")) - SOME_DB)
                .by("subtracts", in -> SOME_DB - Levels.less(SOME_DB, SOME_DB - in.number("difference_dB")))
                .by("equal-ones", in -> in.number("L_dB") + Levels.manyDb((int) in.number("n")))
                .by("further-away", SoundChecks::furtherAway)
                .by("in-a-room", SoundChecks::inARoom)
                .by("half-sphere", in -> Levels.powerDb(new Level(SOME_DB, in.number("radius_m"))) - SOME_DB)
                .by("whole-sphere", in -> -openAir().reachingDb(1, in.number("radius_m")))
                .by(
                        "glass",
                        in -> Walls.plateDb(
                                in.number("frequency_Hz"), Plate.ofGlass(GLASS_M, in.number("surface_mass_kg_per_m2"))))
                .by(
                        "assumed-wall",
                        in -> CatalogueFiles.load().assumed(WALL_REDUCTION).si())
                .by(
                        "assumed-door",
                        in -> CatalogueFiles.load().assumed(DOOR_REDUCTION).si());
    }

    private static double sum(double... levels) {
        return Levels.sum(DoubleStream.of(levels));
    }

    private static double furtherAway(Inputs in) {
        double powerDb = Levels.powerDb(new Level(in.number("L_dB"), in.number("r1_ft") * Measures.FOOT_M));
        return powerDb + openAir().reachingDb(2, in.number("r2_ft") * Measures.FOOT_M);
    }

    private static double inARoom(Inputs in) {
        double absorption = in.number("mean_alpha");
        Hall hall = new Hall(in.number("absorption_m2") / absorption, absorption);
        return in.number("Lw_dB") + hall.reachingDb(in.number("Q"), in.number("distance_m"));
    }

    /** A hall so wide that nothing comes back. */
    private static Hall openAir() {
        return new Hall(1e12, 0.5);
    }
}
