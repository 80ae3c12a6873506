/** Ways of looking at the case that change nothing in it. */
package saddlewright.desktop.views;
