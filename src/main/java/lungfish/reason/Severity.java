package lungfish.reason;

/** How much a finding matters. */
public enum Severity {
    /** The plan does not work until this is mended. */
    BLOCKING,
    /** The plan works, but something in it is likely to go wrong. */
    WARNING,
    /** Can hurt someone: the usual caution, with deference to local codes and licensed practice. */
    CAUTION,
    /** Good to know. */
    NOTE
}
