/**
 * That nothing is lost: every edit that is not saved stands in a recovery copy within a second,
 * outside the user's own files; work of a program that ended is offered at the next start; a file
 * that another has changed is never written over unasked, and what it held before stays beside it.
 *
 * <p>What is written here is written on a thread of its own. Who the patient is never stands in the
 * copy of a case, but in a file of its own, and only while it is saved nowhere else.
 */
package saddlewright.desktop.safekeeping;
