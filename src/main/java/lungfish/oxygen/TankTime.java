package lungfish.oxygen;

import java.util.OptionalDouble;
import lungfish.room.Tank;

/**
 * How long a tank lasts when its air stops and nothing helps.
 *
 * @param likelyS until the danger level; absent: never
 * @param cautiousS the same at worst
 * @param alarmS until the alarm level, at worst
 * @param typed whether it is the time that the room says
 */
public record TankTime(
        Tank tank, OptionalDouble likelyS, OptionalDouble cautiousS, OptionalDouble alarmS, boolean typed) {}
