/** The pictures of the page that is shown first. */
package saddlewright.desktop.welcome;
