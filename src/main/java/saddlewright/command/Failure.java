package saddlewright.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Turns what went wrong into a sentence for standard error. */
final class Failure {
  private Failure() {}

  static String sentence(Throwable e) {
    if (e instanceof UncheckedIOException u) {
      return sentence(u.getCause());
    }
    if (e instanceof NoSuchFileException f) {
      return f.getFile() + ": the folder does not exist; make it or name another.";
    }
    if (e instanceof AccessDeniedException f) {
      return f.getFile() + ": no permission to write there; choose another folder.";
    }
    if (e instanceof FileSystemException f && f.getReason() != null) {
      return f.getFile() + ": " + f.getReason() + ".";
    }
    if (e instanceof IOException) {
      return "Cannot write: " + e.getMessage() + ".";
    }
    return e.getMessage() == null ? e.toString() : e.getMessage();
  }
}
