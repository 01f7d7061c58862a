/**
 * The page: a front door beside the commands. A small server on this machine alone, which answers
 * the page's requests by calling {@code job}.
 */
package org.bearingline.web;
