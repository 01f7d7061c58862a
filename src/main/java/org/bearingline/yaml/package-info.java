/**
 * Reads the YAML files a maker writes into nodes that know their line and column. Nothing is
 * instantiated from a file; size, depth and aliases are limited.
 */
package org.bearingline.yaml;
