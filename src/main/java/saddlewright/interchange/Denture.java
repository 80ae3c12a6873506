package saddlewright.interchange;

import saddlewright.dentition.Arch;

/** The DeviceRequest of an arch. */
record Denture(Arch arch, Resource request) {}
