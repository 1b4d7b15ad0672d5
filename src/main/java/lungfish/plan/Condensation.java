package lungfish.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lungfish.air.DewPoint;
import lungfish.quantity.Dimension;
import lungfish.reason.Amount;
import lungfish.reason.Assumable;
import lungfish.reason.Code;
import lungfish.reason.Finding;
import lungfish.room.Blower;
import lungfish.room.Room;
import lungfish.room.Run;

/**
 * Where the moisture of the air settles in the pipe: the dew point of what the blower draws, compressed as it runs, against
 * what lies around each run and hose. A pipe is taken to be as cold as its surroundings, as it is when the blower rests.
 */
final class Condensation {
    private final Setup setup;
    private final double dewK;
    private final List<Finding> findings = new ArrayList<>();

    private Condensation(Setup setup, double gaugePa) {
        this.setup = setup;
        double ambientPa = setup.surroundings().ambientPa();
        this.dewK = DewPoint.ofVapourK(vapourPa() * (ambientPa + gaugePa) / ambientPa);
    }

    static List<Finding> of(Setup setup, AirSide air) {
        return of(setup, air.duty().candidate().tired().gaugePa());
    }

    static List<Finding> of(Setup setup, double gaugePa) {
        Condensation own = new Condensation(setup, gaugePa);
        own.runs();
        own.hoses();
        return own.findings;
    }

    private Room room() {
        return setup.room();
    }

    /** Of the blowers' intakes the dampest. */
    private double vapourPa() {
        return setup.planned().stream()
                .mapToDouble(blower -> vapourPa(blower.siting().intakeTemperatureK()))
                .max()
                .orElseGet(() -> vapourPa(OptionalDouble.empty()));
    }

    /**
     * A room file knows the damp of the room alone. Air drawn elsewhere is taken to be as damp as the damper of two: the
     * room's own air let in there, and air of that place at the same relative humidity; but no damper than saturated.
     */
    private double vapourPa(OptionalDouble intakeK) {
        double humidity = room().climate()
                .humidity()
                .orElse(setup.catalogue().assumed(Assumable.HUMIDITY).si());
        double ofRoom = humidity
                * DewPoint.saturationPa(setup.surroundings().temperatureK().si());
        if (intakeK.isEmpty()) {
            return ofRoom;
        }
        double saturated = DewPoint.saturationPa(intakeK.getAsDouble());
        return Math.min(saturated, Math.max(ofRoom, humidity * saturated));
    }

    private void runs() {
        room().runs().stream()
                .filter(run -> run.surroundingsK().isPresent())
                .forEach(run -> look(run, run.surroundingsK().getAsDouble()));
        OptionalDouble coldest = room().climate().coldestPipeK();
        if (coldest.isPresent()) {
            somewhere().ifPresent(run -> look(run, coldest.getAsDouble()));
        }
    }

    /** The room says how cold its pipe gets and not where: the first main of which it says nothing itself. */
    private Optional<Run> somewhere() {
        return room().runs().stream()
                .filter(run -> run.surroundingsK().isEmpty())
                .min(Comparator.comparing(Run::role));
    }

    private void look(Run run, double pipeK) {
        if (pipeK < dewK) {
            findings.add(Finding.of(
                    Code.CONDENSATION,
                    run.id().part(),
                    temperature("found", pipeK),
                    temperature("allowed", dewK),
                    new Amount("low", run.lowestM(), Dimension.LENGTH)));
        }
    }

    /** Of the blowers that stand outside the room, the one in the coldest place: the others are like it. */
    private void hoses() {
        setup.planned().stream()
                .filter(blower -> blower.siting().outside())
                .filter(blower -> intakeK(blower) < dewK)
                .min(Comparator.comparingDouble(Condensation::intakeK))
                .ifPresent(blower -> findings.add(Finding.of(
                        Code.CONDENSATION_IN_HOSE,
                        blower.id().part(),
                        temperature("found", intakeK(blower)),
                        temperature("allowed", dewK))));
    }

    private static double intakeK(Blower blower) {
        return blower.siting().intakeTemperatureK().orElse(Double.POSITIVE_INFINITY);
    }

    private static Amount temperature(String name, double kelvin) {
        return new Amount(name, kelvin, Dimension.TEMPERATURE);
    }
}
