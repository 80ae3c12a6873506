/**
 * What of a component can be taken hold of, where it can be moved to, and what the rules say of it
 * there. Nothing here knows of pixels or nodes.
 */
package saddlewright.desktop.sheet.handles;
