/**
 * Rules of undercuts: where a tip lies, how deep, and what the arm behind it needs to spring.
 *
 * <p>One claim, one class, one page in docs/rules.
 */
package saddlewright.rules.undercut;
