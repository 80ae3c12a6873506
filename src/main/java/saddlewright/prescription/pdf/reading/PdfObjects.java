package saddlewright.prescription.pdf.reading;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import saddlewright.prescription.pdf.reading.Allowance.Spent;
import saddlewright.prescription.pdf.reading.PdfTokens.Broken;
import saddlewright.prescription.pdf.reading.PdfValue.Entries;

/**
 * The numbered objects of a document, found by reading the file from front to back; where one was
 * written anew, the later stands.
 *
 * <p>The table of places at the end of the file is not used: it may be damaged or lie, and what is
 * read front to back comes to an end. The PDF library is not used either: it unpacks without limit.
 */
final class PdfObjects {
  private static final byte[] OBJECT = {'o', 'b', 'j'};
  private static final byte[] STREAM = {'s', 't', 'r', 'e', 'a', 'm'};
  private static final byte[] END_OF_STREAM = {'e', 'n', 'd', 's', 't', 'r', 'e', 'a', 'm'};

  /** An object that only refers to another is rare, and a row of them is a trap. */
  private static final int LONGEST_CHAIN = 8;

  private static final int CHUNK = 1 << 14;

  private final byte[] file;
  private final Allowance allowance;
  private final Map<Integer, PdfValue> byNumber = new HashMap<>();
  private Optional<Entries> trailer = Optional.empty();

  private PdfObjects(byte[] file, Allowance allowance) {
    this.file = file;
    this.allowance = allowance;
  }

  static PdfObjects in(byte[] file, Allowance allowance) throws Spent {
    PdfObjects out = new PdfObjects(file, allowance);
    out.scan();
    return out;
  }

  /** The last dictionary that names the root of the document. */
  Optional<Entries> trailer() {
    return trailer;
  }

  /** The value itself, where it is a reference what it refers to; none where that is missing. */
  Optional<PdfValue> resolve(PdfValue value) {
    PdfValue v = value;
    for (int i = 0; v instanceof PdfValue.Reference r; i++) {
      if (i == LONGEST_CHAIN || !byNumber.containsKey(r.number())) {
        return Optional.empty();
      }
      v = byNumber.get(r.number());
    }
    return Optional.of(v);
  }

  /** A member of a dictionary when it is a dictionary itself. */
  Optional<Entries> entries(Entries of, String name) {
    return of.get(name).flatMap(this::resolve).flatMap(PdfObjects::entries);
  }

  static Optional<Entries> entries(PdfValue value) {
    return value instanceof Entries e ? Optional.of(e) : Optional.empty();
  }

  private void scan() throws Spent {
    int i = 0;
    while (i < file.length) {
      byte b = file[i];
      if (b >= '0' && b <= '9' && startsWord(i)) {
        i = object(i);
      } else if (b == 't' && startsWord(i)) {
        i = trailer(i);
      } else {
        i++;
      }
    }
  }

  private boolean startsWord(int i) {
    return i == 0 || PdfTokens.isSpace(file[i - 1]);
  }

  /** Reads "12 0 obj" and what follows; gives where to go on. */
  private int object(int from) throws Spent {
    PdfTokens tokens = new PdfTokens(file, from, allowance);
    String number = tokens.plain();
    int next = tokens.at();
    tokens.skipSpace();
    String generation = tokens.plain();
    tokens.skipSpace();
    int word = tokens.at();
    allowance.steps(word - from);
    // Some writers put no space between this word and the object.
    if (!PdfTokens.isWhole(number) || !PdfTokens.isWhole(generation) || !is(OBJECT, word)) {
      return next;
    }
    tokens = new PdfTokens(file, word + OBJECT.length, allowance);
    try {
      PdfValue value = tokens.value();
      int end = tokens.at();
      if (value instanceof Entries e) {
        value = withData(e, end);
        end = Math.max(end, ((Entries) value).to());
      }
      put(number, value);
      return end;
    } catch (Broken e) {
      return word + OBJECT.length;
    }
  }

  private void put(String number, PdfValue value) throws Spent {
    long n = Long.parseLong(number);
    if (n > Integer.MAX_VALUE) {
      return;
    }
    byNumber.put((int) n, value);
    if (value instanceof Entries e) {
      if (e.isOfType("XRef")) {
        noteTrailer(e);
      }
      if (e.isOfType("ObjStm")) {
        packedObjects(e);
      }
    }
  }

  private int trailer(int from) throws Spent {
    PdfTokens tokens = new PdfTokens(file, from, allowance);
    if (!tokens.plain().equals("trailer")) {
      return from + 1;
    }
    int after = tokens.at();
    try {
      if (tokens.value() instanceof Entries e) {
        noteTrailer(e);
        return tokens.at();
      }
    } catch (Broken e) {
      // Then another one counts.
    }
    return after;
  }

  private void noteTrailer(Entries e) {
    if (e.get("Root").isPresent()) {
      trailer = Optional.of(e);
    }
  }

  /** The dictionary with the data that follow it, when it is a stream. */
  private Entries withData(Entries e, int end) throws Spent {
    int i = end;
    while (i < file.length && PdfTokens.isSpace(file[i])) {
      i++;
    }
    if (!is(STREAM, i)) {
      return e;
    }
    i += STREAM.length;
    if (i < file.length && file[i] == '\r') {
      i++;
    }
    if (i < file.length && file[i] == '\n') {
      i++;
    }
    return new Entries(e.values(), i, endOfData(e, i));
  }

  private int endOfData(Entries e, int from) throws Spent {
    if (e.get("Length").orElse(null) instanceof PdfValue.Whole w
        && w.value() <= file.length - from) {
      int to = from + (int) w.value();
      int i = to;
      while (i < file.length && i < to + 2 && PdfTokens.isSpace(file[i])) {
        i++;
      }
      if (is(END_OF_STREAM, i)) {
        return to;
      }
    }
    int i = from;
    while (i < file.length && !is(END_OF_STREAM, i)) {
      i++;
    }
    allowance.steps(i - from);
    return i;
  }

  private boolean is(byte[] word, int at) {
    if (at + word.length > file.length) {
      return false;
    }
    for (int k = 0; k < word.length; k++) {
      if (file[at + k] != word[k]) {
        return false;
      }
    }
    return true;
  }

  /** Objects that are kept together in a stream: first their numbers and places, then they. */
  private void packedObjects(Entries e) throws Spent {
    Optional<byte[]> data = data(e);
    if (data.isEmpty()
        || !(e.get("N").orElse(null) instanceof PdfValue.Whole count)
        || !(e.get("First").orElse(null) instanceof PdfValue.Whole first)) {
      return;
    }
    PdfTokens head = new PdfTokens(data.get(), 0, allowance);
    try {
      for (long k = 0; k < count.value(); k++) {
        if (!(head.value() instanceof PdfValue.Whole number)
            || !(head.value() instanceof PdfValue.Whole place)
            || first.value() + place.value() >= data.get().length) {
          return;
        }
        PdfValue value =
            new PdfTokens(data.get(), (int) (first.value() + place.value()), allowance).value();
        if (!(value instanceof Entries packed) || !packed.isOfType("ObjStm")) {
          put(Long.toString(number.value()), value);
        }
      }
    } catch (Broken broken) {
      // What could be read stands.
    }
  }

  /** The data of a stream unpacked; none when they are packed in a way that is not known here. */
  Optional<byte[]> data(Entries e) throws Spent {
    Optional<PdfValue> filter = e.get("Filter").flatMap(this::resolve).map(PdfObjects::only);
    if (filter.isEmpty() && e.get("Filter").isPresent()) {
      return Optional.empty();
    }
    boolean foretold =
        entries(e, "DecodeParms").flatMap(p -> p.get("Predictor")).isPresent()
            || e.get("DecodeParms").flatMap(this::resolve).orElse(null) instanceof PdfValue.Items;
    if (foretold) {
      return Optional.empty();
    }
    if (filter.isEmpty()) {
      allowance.unpacked(e.to() - e.from());
      return Optional.of(Arrays.copyOfRange(file, e.from(), e.to()));
    }
    boolean flate =
        filter.get().equals(new PdfValue.Name("FlateDecode"))
            || filter.get().equals(new PdfValue.Name("Fl"));
    return flate ? inflated(e) : Optional.empty();
  }

  /** A list of one filter is that filter. */
  private static PdfValue only(PdfValue filter) {
    return filter instanceof PdfValue.Items i && i.values().size() == 1
        ? i.values().get(0)
        : filter;
  }

  private Optional<byte[]> inflated(Entries e) throws Spent {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(file, e.from(), e.to() - e.from());
      byte[] chunk = new byte[CHUNK];
      while (!inflater.finished()) {
        int n = inflater.inflate(chunk);
        if (n == 0) {
          return Optional.empty();
        }
        allowance.unpacked(n);
        out.write(chunk, 0, n);
      }
      return Optional.of(out.toByteArray());
    } catch (DataFormatException broken) {
      return Optional.empty();
    } finally {
      inflater.end();
    }
  }
}
