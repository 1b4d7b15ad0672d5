package lungfish.standing;

/**
 * What the failure of one machine takes, at the worst.
 *
 * @param tanks without any air until a hand helps
 * @param less tanks that have less air until then, but some
 * @param leftShare of their air that those still have: 1 where there are none
 * @param forS how long, s
 */
public record Loss(int tanks, int less, double leftShare, double forS) {}
