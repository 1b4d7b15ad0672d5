package lungfish.standing;

/**
 * How often things fail, and how soon somebody is there.
 *
 * @param mtbfS mean time between failures of a machine, running
 * @param noticeS from no air at all until somebody notices
 * @param quietNoticeS the same where no alarm can ring: a small pump stopped, or there is less air but not none. A low-pressure
 *     alarm hardly sees half the air, as most of the pressure is the depth of the water
 * @param mendS from noticing until the machine is replaced
 * @param handS from noticing until a standby that is started by hand gives air
 * @param selfS from the failure until a standby that starts by itself gives air
 * @param mainsPerYear failures of the mains in a year
 * @param mainsS how long the mains then stay off, on average
 */
public record Rates(
        double mtbfS,
        double noticeS,
        double quietNoticeS,
        double mendS,
        double handS,
        double selfS,
        double mainsPerYear,
        double mainsS) {
    /** From the failure of all the air until the machine is replaced, s. */
    double backS() {
        return noticeS + mendS;
    }

    /** The same where no alarm rings, s. */
    double quietBackS() {
        return quietNoticeS + mendS;
    }

    double ratePerS() {
        return 1 / mtbfS;
    }
}
