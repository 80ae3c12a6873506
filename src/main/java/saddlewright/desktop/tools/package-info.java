/** What the pointer means in each step: one small tool for each thing that can be placed. */
package saddlewright.desktop.tools;
