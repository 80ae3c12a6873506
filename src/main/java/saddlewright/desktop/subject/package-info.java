/** What can be selected: its name, what is measured of it, what can be changed of it. */
package saddlewright.desktop.subject;
