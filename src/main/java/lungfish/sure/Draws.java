package lungfish.sure;

import java.util.SplittableRandom;
import lungfish.demand.Need;

/**
 * The luck of a block of samples, as shares from 0 to 1 of which each is as likely as any other.
 *
 * <p>What is shared by many things decides most of a band, so it is drawn as a Latin hypercube: of n samples, each nth part
 * of its range holds just one (M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21(2), 1979, p. 239). The many
 * draws that belong to one outlet only even out among themselves, and are plain.
 */
final class Draws {
    private final Layout layout;
    private final double[][] shared;
    private final double[][] own;

    Draws(Layout layout, int samples, long seed) {
        this.layout = layout;
        SplittableRandom random = new SplittableRandom(seed);
        shared = new double[layout.shared()][];
        for (int i = 0; i < shared.length; i++) {
            shared[i] = evenly(samples, random);
        }
        own = new double[samples][layout.own()];
        for (double[] sample : own) {
            for (int i = 0; i < sample.length; i++) {
                sample[i] = random.nextDouble();
            }
        }
    }

    private static double[] evenly(int samples, SplittableRandom random) {
        double[] shares = new double[samples];
        for (int i = 0; i < samples; i++) {
            int at = random.nextInt(i + 1); // an inside-out shuffle
            shares[i] = shares[at];
            shares[at] = (i + random.nextDouble()) / samples;
        }
        return shares;
    }

    int samples() {
        return own.length;
    }

    /** The share of an input of the whole room. */
    double share(Layout.Common input, int sample) {
        return shared[layout.shared(input)][sample];
    }

    /** The deviate of an input of the whole room. */
    double deviate(Layout.Common input, int sample) {
        return Chance.deviate(share(input, sample));
    }

    /** The deviate that all devices of a class have in common. */
    double ofClass(Need need, Layout.Trait trait, int sample) {
        return Chance.deviate(shared[layout.shared(need, trait)][sample]);
    }

    /** The deviate of one outlet alone. */
    double ofOutlet(Need need, Layout.Trait trait, int sample) {
        return Chance.deviate(own[sample][layout.own(need, trait)]);
    }
}
