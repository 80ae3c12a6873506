package saddlewright.prescription.pdf;

import java.io.IOException;
import java.util.List;

/** What the laboratory fills in and sends back with the work. */
final class ReturnSection implements Section {

  @Override
  public void write(Flow flow) throws IOException {
    flow.newPage();
    flow.heading("Laboratory return");
  }
}
