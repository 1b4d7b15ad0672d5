package lungfish.measured;

import lungfish.commissioning.Expected;

/**
 * How far off things are, before anybody reads them. What is only known to lie between two limits counts with the standard
 * deviation of a rectangular distribution, half its width over √3 (JCGM 100:2008, 4.3.7).
 */
final class Doubts {
    private static final double RECTANGLE = Math.sqrt(3);

    /** Of a gauge on one day, Pa: a zero that is off stays off for the day. */
    static final double GAUGE_PA = Expected.GAUGE_PA / RECTANGLE;

    /** Of a jar and a watch, as a share of the time. */
    static final double JAR_SHARE = Expected.JAR_SHARE / RECTANGLE;

    /** Of the depth of an air release, m: two centimetres either way. Common practice, no source. */
    static final double DEPTH_M = 0.02 / RECTANGLE;

    /** Natural logarithm of a whole class of devices against the catalogue. Common practice, no source. */
    static final double CLASS_LOG = 0.2;

    /** Natural logarithm of one device against its class: with the class, three tenths together. Common practice, no source. */
    static final double DEVICE_LOG = 0.22;

    /** Natural logarithm of what fouling adds against what the class says at that age. Common practice, no source. */
    static final double FOULING_LOG = 0.3;

    /** The same of all of a class together. Common practice, no source. */
    static final double CLASS_FOULING_LOG = 0.15;

    /** Pressure that wanders at an outlet from day to day, Pa: a level, a kink, a clip. Common practice, no source. */
    static final double WOBBLE_PA = 30;

    /** Natural logarithm of a new blower's air against its data sheet. Common practice, no source. */
    static final double BLOWER_LOG = 0.1;

    /** How much steeper its curve may be, as a share of its slope. Common practice, no source. */
    static final double STEEPNESS = 0.2;

    /** Of the share that a blower loses as it ages, against the line from new to due: a share of it. No source. */
    static final double AGEING_SHARE = 0.3;

    /** The least doubt about that share. Common practice, no source. */
    static final double AGEING_LEAST = 0.01;

    /** Natural logarithm of a flow that nobody read when the valves were set. Common practice, no source. */
    static final double UNREAD_LOG = 0.1;

    /** Natural logarithm of the flow through a valve that nobody set by the jar. Common practice, no source. */
    static final double UNSET_LOG = 0.5;

    /** Of a pressure that nobody read when the valves were set, Pa. Common practice, no source. */
    static final double UNREAD_PA = 300;

    /** What a sound pipe leaks, as a share of the room's air, and the doubt about it: half of what the leak test lets pass. */
    static final double SEEP_SHARE = 0.005;

    static final double SEEP_DOUBT = 0.004;

    /** Of the air that a fall of the gauge tells, as a share: the law of the leak, the volume of the pipe. No source. */
    static final double FALL_SHARE = 0.15;

    /** Of a watch that is stopped by hand while a gauge moves, s. Common practice, no source. */
    static final double WATCH_S = 0.5;

    /** Of a typed opening, as a share of what the valve takes there. Common practice, no source. */
    static final double OPENING_SHARE = 0.3;

    /** Natural logarithm of watts read twice with one meter. Common practice, no source. */
    static final double WATTS_LOG = 0.03;

    /** How probable it is that an outlet has another device than the room says. Common practice, no source. */
    static final double OTHER_ODDS = 0.05;

    /** What fouling of another device may take, as a share of the head above the water. No source. */
    static final double OTHER_HEAD = 0.2;

    private Doubts() {}
}
