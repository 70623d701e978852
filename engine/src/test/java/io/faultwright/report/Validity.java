package io.faultwright.report;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.xml.sax.SAXException;

/** Reports judged by published schemas; the files and their terms are in {@code schemas}. */
public final class Validity {
  private static final Path FOLDER = Path.of("src/test/resources/schemas");

  private static final Schema SARIF =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4)
          .getSchema(read("sarif-schema-2.1.0.json"), InputFormat.JSON);

  private Validity() {}

  /** What the schema of OASIS finds wrong in a SARIF log. */
  public static List<String> sarif(String log) {
    return SARIF
        .validate(
            log,
            InputFormat.JSON,
            context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)))
        .stream()
        .map(Object::toString)
        .toList();
  }

  /** What the schema of Windy Road Technology finds wrong in JUnit XML. */
  public static Optional<String> junit(String xml) {
    try {
      SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
          .newSchema(FOLDER.resolve("JUnit.xsd").toFile())
          .newValidator()
          .validate(new StreamSource(new StringReader(xml)));
      return Optional.empty();
    } catch (SAXException wrong) {
      return Optional.of(wrong.toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String read(String name) {
    try {
      return Files.readString(FOLDER.resolve(name));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
