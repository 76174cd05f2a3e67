package org.belthigh.handout.kit;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** Asks veraPDF whether a document follows a standard. */
public final class Conformance {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private Conformance() {}

  /** Failed checks; empty if the document follows the standard. */
  public static List<String> faults(byte[] pdf, PDFAFlavour standard) {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), standard);
        var validator = Foundries.defaultInstance().createValidator(standard, false)) {
      var result = validator.validate(parser);
      List<String> faults =
          result.getTestAssertions().stream()
              .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
              .map(
                  assertion ->
                      assertion.getRuleId().getClause()
                          + ": "
                          + assertion.getMessage()
                          + " at "
                          + assertion.getLocation().getContext())
              .distinct()
              .toList();
      return faults.isEmpty() && !result.isCompliant() ? List.of("not compliant") : faults;
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }
}
