/**
 * Rules of indirect retention: what stops a saddle from turning away from its ridge.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.indirect;
