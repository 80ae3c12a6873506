package saddlewright.interchange;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.validation.FhirValidator;
import ca.uhn.fhir.validation.ResultSeverityEnum;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hl7.fhir.common.hapi.validation.support.CommonCodeSystemsTerminologyService;
import org.hl7.fhir.common.hapi.validation.support.InMemoryTerminologyServerValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.PrePopulatedValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain;
import org.hl7.fhir.common.hapi.validation.validator.FhirInstanceValidator;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.CodeSystem;

/**
 * HL7's own validator of FHIR R4, as HAPI FHIR packs it, with the specification's profiles and
 * value sets and with the code lists that are published in {@code docs/fhir-codes.json}; it asks no
 * server. Made once, since that takes seconds.
 */
final class R4 {
  static final Path CODES = Path.of("docs", "fhir-codes.json");

  private static final FhirContext CONTEXT = FhirContext.forR4Cached();
  private static final FhirValidator VALIDATOR = validator();

  private R4() {}

  /** What the validator objects to, warnings included; empty when nothing. */
  static List<String> objections(byte[] json) {
    return VALIDATOR
        .validateWithResult(new String(json, StandardCharsets.UTF_8))
        .getMessages()
        .stream()
        .filter(m -> m.getSeverity().ordinal() >= ResultSeverityEnum.WARNING.ordinal())
        .map(m -> m.getSeverity() + " " + m.getLocationString() + ": " + m.getMessage())
        .toList();
  }

  /** The bundle as HAPI reads it. */
  static Bundle read(byte[] json) {
    return CONTEXT
        .newJsonParser()
        .parseResource(Bundle.class, new String(json, StandardCharsets.UTF_8));
  }

  /** The codes of a code system that the specification publishes. */
  static Set<String> codesOf(String system) {
    CodeSystem found =
        (CodeSystem) new DefaultProfileValidationSupport(CONTEXT).fetchCodeSystem(system);
    return found.getConcept().stream()
        .flatMap(c -> Stream.concat(Stream.of(c), c.getConcept().stream()))
        .map(CodeSystem.ConceptDefinitionComponent::getCode)
        .collect(Collectors.toSet());
  }

  private static FhirValidator validator() {
    PrePopulatedValidationSupport published = new PrePopulatedValidationSupport(CONTEXT);
    try {
      read(Files.readAllBytes(CODES))
          .getEntry()
          .forEach(e -> published.addResource(e.getResource()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    FhirInstanceValidator instances =
        new FhirInstanceValidator(
            new ValidationSupportChain(
                new DefaultProfileValidationSupport(CONTEXT),
                published,
                new CommonCodeSystemsTerminologyService(CONTEXT),
                new InMemoryTerminologyServerValidationSupport(CONTEXT)));
    instances.setAnyExtensionsAllowed(false);
    return CONTEXT.newValidator().registerValidatorModule(instances);
  }
}
