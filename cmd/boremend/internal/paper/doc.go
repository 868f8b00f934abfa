// Package paper makes the papers of a job: one for the customer, who must
// understand and agree, and one for the shop, which does the work by it.
//
// A paper is a Document, a list of blocks such as headings, tables and lines to
// sign on. Customer and Shop write documents from a Job, which holds everything
// that was judged and sized before; they choose words and order, and compute
// nothing. HTML and PDF render any document and know nothing of bores.
//
// To add a part to a paper, write a function that adds blocks to a writer, and
// name it in the list of parts in customer.go or shop.go. To add a kind of
// block, declare it in document.go, give it a template in page.gohtml, and strips
// in strips.go; a test renders every kind.
package paper
