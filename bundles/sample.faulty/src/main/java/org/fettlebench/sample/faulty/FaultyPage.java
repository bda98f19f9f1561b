package org.fettlebench.sample.faulty;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Page;
import org.osgi.service.component.annotations.Component;

/** A page that cannot be made. */
@Component
public final class FaultyPage implements Page {
  @Override
  public String id() {
    return "sample.faulty";
  }

  @Override
  public String title() {
    return "Faulty page";
  }

  @Override
  public int order() {
    return 65;
  }

  @Override
  public Control create(Composite parent, Desk desk) {
    throw new IllegalStateException("the faulty page cannot be made");
  }
}
