package io.faultwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The JSON Schema of field cases, judged by a validator from outside. */
class FieldCasesSchemaTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(Stored.read(Stored.DOCS.resolve("field-cases.schema.json")), InputFormat.JSON);

  private static List<Error> errors(String yaml) {
    return SCHEMA.validate(yaml, InputFormat.YAML);
  }

  @Test
  void schemaItselfIsValid() {
    Schema meta =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertEquals(
        List.of(),
        meta.validate(
            Stored.read(Stored.DOCS.resolve("field-cases.schema.json")), InputFormat.JSON));
  }

  @Test
  void exampleIsValid() {
    assertEquals(
        List.of(), errors(Stored.read(Stored.DOCS.resolve("field").resolve("phone-jobs.yaml"))));
  }

  /** What the demo's own cases say is valid too. */
  @ParameterizedTest
  @ValueSource(strings = {"low-suction-pressure", "ice-untouched", "room-too-warm"})
  void casesOfTheDemoAreValid(String name) {
    String cases =
        Stored.read(
            Stored.DOCS
                .resolveSibling("rules")
                .resolve("walk-in-freezers")
                .resolve("cases")
                .resolve(name + ".yaml"));
    assertEquals(List.of(), errors(cases));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cases: { a: { symptom: s, given: {} } }",
        "cases: { a: { symptom: s, given: { fan: yes, n: 2.5, m: true }, expect: [x, y] } }",
        "cases: { a: { symptom: s, given: {}, expect: { refer: t }, unclear: [one, two] } }",
        "{\"cases\": {\"a\": {\"symptom\": \"s\", \"given\": {}, \"origin\": 4711}}}"
      })
  void completeCasesAreValid(String yaml) {
    assertEquals(List.of(), errors(yaml));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cases: {}",
        "case: { a: { symptom: s, given: {} } }",
        "cases: [ { symptom: s, given: {} } ]",
        "cases: { a: { symptom: s } }",
        "cases: { a: { given: {} } }",
        "cases: { a: { symptom: s, given: { fan: [yes, no] } } }",
        "cases: { a: { symptom: s, given: {}, expect: [] } }",
        "cases: { a: { symptom: s, given: {}, expect: { refer: t, escalate: u } } }",
        "cases: { a: { symptom: s, given: {}, unclear: [] } }",
        "cases: { a: { symptom: Not An Id, given: {} } }",
        "cases: { a: { symptom: s, given: {}, when: today } }"
      })
  void brokenCasesAreNot(String yaml) {
    assertFalse(errors(yaml).isEmpty());
  }
}
