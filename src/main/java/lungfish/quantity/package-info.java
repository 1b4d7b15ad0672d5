/** Units at the edge: what a person types becomes SI, what is SI becomes text in the units they read.
 *  Inside the program every number is SI with its unit in its name; nothing below the edge formats a number. */
@NullMarked
package lungfish.quantity;

import org.jspecify.annotations.NullMarked;
