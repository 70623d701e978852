package io.faultwright.render.html;

import freemarker.cache.ClassTemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.log.Logger;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import io.faultwright.words.Words;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;

/** The templates on the class path; none is ever made from a trainer's text. */
final class Templates {
  static {
    System.setProperty(Logger.SYSTEM_PROPERTY_NAME_LOGGER_LIBRARY, Logger.LIBRARY_NAME_NONE);
  }

  /** Never changed once it is made, so that all threads may use it; each template is read once. */
  private static final Configuration CONFIGURATION = configuration();

  private static Configuration configuration() {
    Configuration made = new Configuration(Configuration.VERSION_2_3_34);
    made.setTemplateLoader(new ClassTemplateLoader(Templates.class, ""));
    made.setObjectWrapper(new PageWrapper(Configuration.VERSION_2_3_34));
    made.setDefaultEncoding("UTF-8");
    made.setLocale(Locale.ROOT);
    made.setTimeZone(TimeZone.getTimeZone("UTC"));
    made.setNumberFormat("computer");
    made.setOutputFormat(HTMLOutputFormat.INSTANCE);
    made.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    made.setAPIBuiltinEnabled(false);
    made.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    made.setLogTemplateExceptions(false);
    made.setLocalizedLookup(false);
    made.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
    return made;
  }

  /** The template's output for these values. */
  String print(String template, Words words, Map<String, Object> values) {
    try {
      Map<String, Object> all = new HashMap<>(values);
      all.put("say", new Saying(words));
      StringWriter out = new StringWriter();
      CONFIGURATION.getTemplate(template).process(all, out);
      return out.toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (TemplateException e) {
      throw new IllegalStateException("template " + template + " failed", e);
    }
  }
}
