package org.fettlebench.testkit.sample;

import java.util.concurrent.Callable;

/** A service of a JDK type, which every bundle sees. */
public final class SampleAnswer implements Callable<Integer> {
  @Override
  public Integer call() {
    return 42;
  }
}
