/** A document as one page for any browser, without a network; figures as SVG. */
@NullMarked
package lungfish.web;

import org.jspecify.annotations.NullMarked;
