/** A document before it has a form: titles, tables, checklists, cautions and figures. Print and web give it one. */
@NullMarked
package lungfish.document;

import org.jspecify.annotations.NullMarked;
