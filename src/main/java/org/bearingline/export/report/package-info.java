/** The figures of a job as JSON: {@link org.bearingline.export.report.Report}. */
package org.bearingline.export.report;
