package lungfish.piping;

import lungfish.room.RunId;

/** A place along a run where something leaves or joins it. */
record Stop(RunId run, double alongM) {}
