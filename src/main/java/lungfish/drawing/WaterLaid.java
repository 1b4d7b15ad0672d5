package lungfish.drawing;

import lungfish.siphon.WaterPath;
import lungfish.siphon.Way;

/** A way that water could take when the air stops, laid over a drawing. */
public record WaterLaid(Way way, WaterPath path) {}
