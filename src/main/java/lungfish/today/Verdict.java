package lungfish.today;

/** Whether a central blower should be bought, in a word. */
public enum Verdict {
    /** It pays back within the years that are counted. */
    PAYS,
    /** It never pays back, but the small pumps do not give what is asked, now or by the planned racks. */
    NEEDED,
    /** The small pumps give all that is asked, and it never pays back. */
    NOT_YET,
    /** The planned blower does not serve the room. */
    MEND_FIRST,
    /** It never pays back, and the room does not say which outlets its pumps feed. */
    UNSAID,
    /** Nothing is planned that can be compared. */
    NO_BLOWER,
    /** No pump of today is drawn. */
    NO_PUMPS
}
