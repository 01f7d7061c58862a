package org.bearingline.web;

import java.io.IOException;
import java.util.function.Consumer;
import org.bearingline.problem.Place;
import org.bearingline.problem.Problem;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.MinimumDataRateHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The server of the page: on this machine alone, for one maker. */
public final class PageServer implements AutoCloseable {

  private static final String HERE = "127.0.0.1";

  private static final int MOST_CONNECTIONS = 200;
  private static final int THREADS = 12;
  private static final int LARGEST_HEADER = 8192;

  /** Milliseconds that a connection may lie idle. */
  private static final long IDLE = 30_000;

  /** Bytes a second that a request must come with: on one machine a slow sender means no good. */
  private static final long SLOWEST = 1000;

  private final Server server;
  private final Workers workers;
  private final String address;

  private PageServer(Server server, Workers workers, String address) {
    this.server = server;
    this.workers = workers;
    this.address = address;
  }

  /**
   * Starts a server.
   *
   * @param port 1 to 65535, or 0 for a free one
   * @param defects is told whatever is thrown that no user can cause
   * @throws Problem where the port cannot be had
   */
  public static PageServer start(int port, Consumer<Throwable> defects) {
    if (port < 0 || port > 65_535) {
      throw new Problem(Place.option("--port"), "a port is a number from 1 to 65535");
    }
    QueuedThreadPool threads = new QueuedThreadPool(THREADS);
    threads.setName("page");
    threads.setDaemon(true);
    Server server = new Server(threads);
    ServerConnector connector =
        new ServerConnector(server, 1, 1, new HttpConnectionFactory(http()));
    connector.setHost(HERE);
    connector.setPort(port);
    connector.setIdleTimeout(IDLE);
    server.addConnector(connector);
    server.addBean(new NetworkConnectionLimit(MOST_CONNECTIONS, server));
    server.addBean(new SlowSenders(connector, SLOWEST));
    server.setErrorHandler(new Mishaps(defects));
    try {
      // Opened first: the port it gets tells which host names are its own.
      connector.open();
    } catch (IOException taken) {
      throw new Problem(
          Place.option("--port"),
          "port " + port + " is in use or not yours to take; choose another, or leave it out",
          taken);
    }
    SessionToken token = SessionToken.random();
    Workers workers = new Workers(Math.max(2, Runtime.getRuntime().availableProcessors()), defects);
    int open = connector.getLocalPort();
    PageHandler handler = new PageHandler(new Door(open), token, new Questions(), workers);
    server.setHandler(new MinimumDataRateHandler(handler, SLOWEST, 0));
    try {
      server.start();
    } catch (Exception defect) {
      throw new IllegalStateException("the server did not start", defect);
    }
    return new PageServer(
        server, workers, "http://" + HERE + ":" + open + "/#token=" + token.text());
  }

  private static HttpConfiguration http() {
    HttpConfiguration http = new HttpConfiguration();
    http.setSendServerVersion(false);
    http.setSendDateHeader(false);
    http.setRequestHeaderSize(LARGEST_HEADER);
    return http;
  }

  /** Where a browser finds the page; its token stands behind the #. */
  public String address() {
    return address;
  }

  /** Waits until the server is stopped. */
  public void join() throws InterruptedException {
    server.join();
  }

  @Override
  public void close() {
    workers.close();
    try {
      server.stop();
    } catch (Exception stopping) {
      throw new IllegalStateException("the server did not stop", stopping);
    }
  }
}
