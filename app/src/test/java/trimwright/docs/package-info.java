/** Documents and source rules: pages that are made from code, links, words, conversions. */
@NullMarked
package trimwright.docs;

import org.jspecify.annotations.NullMarked;
