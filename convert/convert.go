// Package convert is the way in and the way out: builder's books to a job, and
// a job's result to a new workbook. It knows nothing of the command line.
package convert
