package io.faultwright.render.html;

import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import io.faultwright.words.Words;
import java.util.List;

/** The words of the tool in the language of a page, as templates call for them. */
@SuppressWarnings("rawtypes")
record Saying(Words words) implements TemplateMethodModelEx {
  @Override
  public Object exec(List arguments) throws TemplateModelException {
    String[] texts = new String[arguments.size()];
    for (int i = 0; i < texts.length; i++) {
      texts[i] = text(arguments.get(i));
    }
    Object[] parts = new Object[texts.length - 1];
    System.arraycopy(texts, 1, parts, 0, parts.length);
    return words.say(texts[0], parts);
  }

  private static String text(Object argument) throws TemplateModelException {
    return argument instanceof TemplateNumberModel number
        ? number.getAsNumber().toString()
        : ((TemplateScalarModel) argument).getAsString();
  }
}
