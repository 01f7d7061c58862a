package org.bearingline.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;

/** One server for the tests of a class; none of them may make it stumble. */
abstract class WithServer {

  static ShopServer server;

  @BeforeAll
  static void start() {
    server = ShopServer.start();
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  @AfterEach
  void noDefect() {
    assertEquals(List.of(), server.defects());
  }
}
