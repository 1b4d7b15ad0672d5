package lungfish.room;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A vessel of water: a tank, or a cone or tumbler of eggs.
 *
 * @param xM its left side, from the left end of the shelf
 * @param waterDepthM from the water line to the bottom glass
 * @param survivalS how long what is in it lives without air, where typed: eggs and fry fail before fish do
 * @param fish who lives in it
 * @param justFed whether it was fed in the hours before; unknown where it is not said
 * @param outlets the devices in it
 */
public record Tank(
        TankId id,
        String name,
        Kind kind,
        double xM,
        Size outside,
        double waterDepthM,
        OptionalDouble temperatureK,
        OptionalDouble salinityKgPerKg,
        OptionalDouble survivalS,
        List<Fish> fish,
        Optional<Feeding> feeding,
        Optional<Boolean> justFed,
        List<Outlet> outlets) {
    /** The kinds of vessel. */
    public enum Kind {
        TANK,
        HATCHING_CONE,
        EGG_TUMBLER
    }

    /** Outside measures: along the shelf, from front to back, and up. */
    public record Size(double lengthM, double widthM, double heightM) {}

    /**
     * Fish of one sort and size.
     *
     * @param massKg of one of them
     */
    public record Fish(String name, int count, double massKg) {}

    /**
     * How the tank is fed.
     *
     * @param kgPerDay dry food
     * @param protein share of it, 0 to 1
     */
    public record Feeding(double kgPerDay, OptionalDouble protein) {}

    public Tank {
        fish = List.copyOf(fish);
        outlets = List.copyOf(outlets);
    }

    /** Its right side, m from the left end of the shelf. */
    public double endXM() {
        return xM + outside.lengthM();
    }

    /** The same tank, its left side that far from the left end of the shelf. */
    public Tank atXM(double that) {
        return new Tank(
                id,
                name,
                kind,
                that,
                outside,
                waterDepthM,
                temperatureK,
                salinityKgPerKg,
                survivalS,
                fish,
                feeding,
                justFed,
                outlets);
    }

    /** The same tank in another size. */
    public Tank sized(Size that) {
        return new Tank(
                id,
                name,
                kind,
                xM,
                that,
                waterDepthM,
                temperatureK,
                salinityKgPerKg,
                survivalS,
                fish,
                feeding,
                justFed,
                outlets);
    }

    /** The same tank, filled to this depth. */
    public Tank filledToM(double depth) {
        return new Tank(
                id,
                name,
                kind,
                xM,
                outside,
                depth,
                temperatureK,
                salinityKgPerKg,
                survivalS,
                fish,
                feeding,
                justFed,
                outlets);
    }

    /** The same tank under another name. */
    public Tank named(String that) {
        return new Tank(
                id,
                that,
                kind,
                xM,
                outside,
                waterDepthM,
                temperatureK,
                salinityKgPerKg,
                survivalS,
                fish,
                feeding,
                justFed,
                outlets);
    }

    /** The same tank as another kind of vessel. */
    public Tank as(Kind that) {
        return new Tank(
                id,
                name,
                that,
                xM,
                outside,
                waterDepthM,
                temperatureK,
                salinityKgPerKg,
                survivalS,
                fish,
                feeding,
                justFed,
                outlets);
    }

    /** The same tank with other water; absent: unknown. */
    public Tank withWater(OptionalDouble temperature, OptionalDouble salinity) {
        return new Tank(
                id,
                name,
                kind,
                xM,
                outside,
                waterDepthM,
                temperature,
                salinity,
                survivalS,
                fish,
                feeding,
                justFed,
                outlets);
    }

    /** The same tank with other contents. */
    public Tank holding(List<Fish> those, Optional<Feeding> food, OptionalDouble survival) {
        return new Tank(
                id,
                name,
                kind,
                xM,
                outside,
                waterDepthM,
                temperatureK,
                salinityKgPerKg,
                survival,
                those,
                food,
                justFed,
                outlets);
    }

    /** The same tank, fed shortly before or not; empty: unknown. */
    public Tank justFed(Optional<Boolean> that) {
        return new Tank(
                id,
                name,
                kind,
                xM,
                outside,
                waterDepthM,
                temperatureK,
                salinityKgPerKg,
                survivalS,
                fish,
                feeding,
                that,
                outlets);
    }

    /** The same tank with these outlets for all of its own. */
    public Tank withOutlets(List<Outlet> those) {
        return new Tank(
                id,
                name,
                kind,
                xM,
                outside,
                waterDepthM,
                temperatureK,
                salinityKgPerKg,
                survivalS,
                fish,
                feeding,
                justFed,
                those);
    }

    /** Water in a plain box of these outside measures, m³; glass is not taken off. */
    public double waterM3() {
        double full = outside.lengthM() * outside.widthM() * waterDepthM;
        return kind == Kind.TANK ? full : full / 3;
    }
}
