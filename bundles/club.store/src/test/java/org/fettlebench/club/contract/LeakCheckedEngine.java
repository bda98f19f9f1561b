package org.fettlebench.club.contract;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javax.sql.DataSource;
import org.fettlebench.store.Dialect;
import org.fettlebench.store.StoreEngine;

/** An engine that remembers every connection and statement, to find those that were left open. */
public final class LeakCheckedEngine implements StoreEngine {
  private final StoreEngine engine;
  private final List<Connection> connections = Collections.synchronizedList(new ArrayList<>());
  private final List<Statement> statements = Collections.synchronizedList(new ArrayList<>());

  /** Watches over {@code engine}. */
  public LeakCheckedEngine(StoreEngine engine) {
    this.engine = engine;
  }

  /** Fails if anything that was handed out is open still; returns how many connections were. */
  public int requireAllClosed() {
    try {
      for (Statement statement : statements) {
        if (!statement.isClosed()) {
          fail("left open: " + statement);
        }
      }
      for (Connection connection : connections) {
        assertTrue(connection.isClosed(), () -> "left open: " + connection);
      }
    } catch (SQLException fault) {
      fail(fault);
    }
    return connections.size();
  }

  @Override
  public DataSource dataSource() {
    DataSource source = engine.dataSource();
    return proxy(
        DataSource.class,
        (self, method, arguments) -> {
          Object result = call(source, method, arguments);
          return result instanceof Connection connection ? watched(connection) : result;
        });
  }

  private Connection watched(Connection connection) {
    connections.add(connection);
    return proxy(
        Connection.class,
        (self, method, arguments) -> {
          Object result = call(connection, method, arguments);
          if (result instanceof Statement statement) {
            statements.add(statement);
          }
          return result;
        });
  }

  private static <T> T proxy(Class<T> type, InvocationHandler handler) {
    return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, handler));
  }

  private static Object call(Object target, Method method, Object[] arguments) throws Throwable {
    try {
      return method.invoke(target, arguments);
    } catch (InvocationTargetException thrown) {
      throw thrown.getCause();
    }
  }

  @Override
  public Dialect dialect() {
    return engine.dialect();
  }

  @Override
  public String description() {
    return engine.description();
  }

  @Override
  public Path backup(String why) {
    return engine.backup(why);
  }
}
