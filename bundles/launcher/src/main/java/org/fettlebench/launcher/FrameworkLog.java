package org.fettlebench.launcher;

import org.osgi.framework.Bundle;
import org.osgi.framework.ServiceReference;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Writes what the framework says into the suite's log. */
final class FrameworkLog extends org.apache.felix.framework.Logger {
  private static final Logger LOG = LoggerFactory.getLogger("framework");

  @Override
  @SuppressWarnings("rawtypes") // as Felix declares it
  protected void doLog(
      Bundle bundle, ServiceReference service, int level, String message, Throwable cause) {
    String text = bundle == null ? message : bundle + ": " + message;
    switch (level) {
      case LOG_ERROR -> LOG.error(text, cause);
      case LOG_WARNING -> LOG.warn(text, cause);
      case LOG_INFO -> LOG.info(text, cause);
      default -> LOG.debug(text, cause);
    }
  }
}
