/**
 * Rules of clasping: which form of clasp suits a tooth, its saddle and the tissues beside it.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.clasping;
