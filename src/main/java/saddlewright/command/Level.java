package saddlewright.command;

import saddlewright.rules.Severity;

/** A severity as written on the command line. */
enum Level {
  must(Severity.MUST),
  should(Severity.SHOULD),
  consider(Severity.CONSIDER);

  final Severity severity;

  Level(Severity severity) {
    this.severity = severity;
  }
}
