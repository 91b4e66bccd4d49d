/**
 * Functions of the standard library that decide how long a flow takes, in plain arithmetic: quicker, and the same on every processor.
 * Each is held against the library's. Sees nothing.
 */
@NullMarked
package trimwright.arithmetic;

import org.jspecify.annotations.NullMarked;
