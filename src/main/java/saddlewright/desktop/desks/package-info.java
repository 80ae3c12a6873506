/**
 * Several cases at once: the windows that are open in this process, where they stand, the files
 * that were open lately, and files that are dropped on a window. Each window has a desk of its own,
 * a {@link saddlewright.desktop.Worktable}; what the user has settled is shared by all of them.
 */
package saddlewright.desktop.desks;
