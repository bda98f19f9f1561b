package org.fettlebench.desktop.internal;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.fettlebench.desktop.Desk;
import org.fettlebench.desktop.Page;
import org.fettlebench.desktop.widgets.Layouts;
import org.fettlebench.measure.Length;

/** A page that keeps account of what the window does with it. */
class TrialPage implements Page {
  final List<String> calls = new ArrayList<>();
  private final String id;
  private final int order;
  Desk desk;
  Label length;
  Text field;

  TrialPage(String id, int order) {
    this.id = id;
    this.order = order;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String title() {
    return "Page " + id;
  }

  @Override
  public int order() {
    return order;
  }

  @Override
  public Control create(Composite parent, Desk newDesk) {
    calls.add("create");
    desk = newDesk;
    Composite page = Layouts.page(parent, desk.look());
    Layouts.answer(page, desk.look(), title());
    length = Layouts.text(page, desk.look(), "");
    field = Layouts.wide(new Text(page, SWT.BORDER));
    desk.onLookChange(this::showLength);
    showLength();
    return page;
  }

  private void showLength() {
    length.setText(desk.show(Length.ofInchFraction(5, 32)));
  }

  @Override
  public void refresh() {
    calls.add("refresh");
  }

  @Override
  public void focus() {
    field.setFocus();
  }

  @Override
  public List<Found> find(String typed) {
    return typed.startsWith("pump")
        ? List.of(new Found(id, "body", "pump body of " + id, "casting"))
        : List.of();
  }

  @Override
  public void show(Found found) {
    calls.add("show " + found.key());
  }

  @Override
  public void print() {
    calls.add("print");
  }

  @Override
  public void close() {
    calls.add("close");
  }
}
