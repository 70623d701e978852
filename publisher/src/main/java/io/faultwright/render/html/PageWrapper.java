package io.faultwright.render.html;

import freemarker.core.HTMLOutputFormat;
import freemarker.ext.beans.ZeroArgumentNonVoidMethodPolicy;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.Version;
import io.faultwright.prose.Html;
import io.faultwright.prose.PlainText;
import java.util.Optional;

/** Shows page records to templates: their components; texts as data. */
final class PageWrapper extends DefaultObjectWrapper {
  PageWrapper(Version version) {
    super(version);
    setRecordZeroArgumentNonVoidMethodPolicy(
        ZeroArgumentNonVoidMethodPolicy.PROPERTY_ONLY_UNLESS_BEAN_PROPERTY_READ_METHOD);
  }

  @Override
  public TemplateModel wrap(Object object) throws TemplateModelException {
    if (object instanceof Optional<?> optional) {
      return optional.isPresent() ? wrap(optional.get()) : null;
    }
    if (object instanceof Html html) {
      return HTMLOutputFormat.INSTANCE.fromMarkup(html.markup());
    }
    return super.wrap(object instanceof String text ? PlainText.of(text) : object);
  }
}
