package draw

import "errors"

var errNotYet = errors.New("not drawn yet")

// SVG renders the drawing as a file that stands alone, font and all, with its
// title and words for those who cannot see it.
func (d Drawing) SVG() ([]byte, error) { return nil, errNotYet }

// InlineSVG renders the drawing as an element to be placed in an HTML page. It
// carries no font: the page names it once, in a style element with FontFace.
func (d Drawing) InlineSVG() ([]byte, error) { return nil, errNotYet }

// FontFace is the CSS that brings the font of all drawings into a page.
func FontFace() (string, error) { return "", errNotYet }

// PNG renders the drawing as a picture of that many dots per inch.
func (d Drawing) PNG(dpi float64) ([]byte, error) { return nil, errNotYet }

// PDF renders the drawing as a page of its own size.
func (d Drawing) PDF() ([]byte, error) { return nil, errNotYet }
