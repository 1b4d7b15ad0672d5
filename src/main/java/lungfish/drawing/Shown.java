package lungfish.drawing;

/** Which of the two trials the outlets show. */
public enum Shown {
    AS_IT_SHOULD_BE_SET,
    AS_IT_IS_SET
}
