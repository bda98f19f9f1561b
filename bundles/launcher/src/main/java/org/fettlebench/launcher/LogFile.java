package org.fettlebench.launcher;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.encoder.PatternLayoutEncoder;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.rolling.FixedWindowRollingPolicy;
import ch.qos.logback.core.rolling.RollingFileAppender;
import ch.qos.logback.core.rolling.SizeBasedTriggeringPolicy;
import ch.qos.logback.core.util.FileSize;
import java.nio.file.Path;
import org.slf4j.LoggerFactory;

/** The log file in the data directory: a few files of a few megabytes, the oldest dropped. */
final class LogFile {
  private static final String PATTERN =
      "%d{yyyy-MM-dd'T'HH:mm:ss.SSSXXX} %-5level [%thread] %logger{30}: %msg%n";
  private static final FileSize MOST_BYTES = FileSize.valueOf("2MB");
  private static final int MOST_FILES = 4;

  private LogFile() {}

  /** Sends all logging of this process to the file and nowhere else. */
  static void open(Path file) {
    LoggerContext context = (LoggerContext) LoggerFactory.getILoggerFactory();
    context.reset();
    RollingFileAppender<ILoggingEvent> appender = new RollingFileAppender<>();
    appender.setContext(context);
    appender.setFile(file.toString());
    appender.setEncoder(encoder(context));
    appender.setRollingPolicy(policy(context, appender, file));
    appender.setTriggeringPolicy(trigger(context));
    appender.start();
    ch.qos.logback.classic.Logger root = context.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
    root.setLevel(Level.INFO);
    root.addAppender(appender);
  }

  private static PatternLayoutEncoder encoder(LoggerContext context) {
    PatternLayoutEncoder encoder = new PatternLayoutEncoder();
    encoder.setContext(context);
    encoder.setPattern(PATTERN);
    encoder.start();
    return encoder;
  }

  private static FixedWindowRollingPolicy policy(
      LoggerContext context, RollingFileAppender<ILoggingEvent> appender, Path file) {
    FixedWindowRollingPolicy policy = new FixedWindowRollingPolicy();
    policy.setContext(context);
    policy.setParent(appender);
    policy.setFileNamePattern(file.toString().replace("%", "\\%") + ".%i");
    policy.setMinIndex(1);
    policy.setMaxIndex(MOST_FILES);
    policy.start();
    return policy;
  }

  private static SizeBasedTriggeringPolicy<ILoggingEvent> trigger(LoggerContext context) {
    SizeBasedTriggeringPolicy<ILoggingEvent> trigger = new SizeBasedTriggeringPolicy<>();
    trigger.setContext(context);
    trigger.setMaxFileSize(MOST_BYTES);
    trigger.start();
    return trigger;
  }
}
