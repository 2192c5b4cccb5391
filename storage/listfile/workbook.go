package listfile

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"strings"

	"github.com/xuri/excelize/v2"

	"lidmark/domain/roll"
)

// mostUnpacked is how big a workbook may be once unpacked: rows at the limit
// take a third of it. A file that unpacks to more is no list.
const mostUnpacked = 64 << 20

var (
	errDamaged = errors.New("the workbook is damaged or cut off: open it and save it again, or fetch it anew")
	errNoBook  = errors.New("it is no workbook: save the table as XLSX or CSV")
	errUnpacks = fmt.Errorf("it unpacks to more than %d MB: save the table alone, without pictures", mostUnpacked>>20)
)

// readBook reads the sheets of a workbook that can be seen.
func readBook(content []byte) (list roll.List, err error) {
	if err := looksSound(content); err != nil {
		return list, err
	}
	defer func() {
		if recover() != nil { // the library trusts the numbers of styles in a file
			list, err = roll.List{}, errDamaged
		}
	}()
	f, err := excelize.OpenReader(bytes.NewReader(content), excelize.Options{
		RawCellValue: true, UnzipSizeLimit: mostUnpacked, UnzipXMLSizeLimit: mostUnpacked,
	})
	if err != nil {
		return list, errDamaged
	}
	defer f.Close() // nothing was written
	b := newWorkbook(f)
	for _, name := range f.GetSheetList() {
		if seen, err := f.GetSheetVisible(name); err != nil || !seen {
			continue
		}
		rows, err := b.rows(name)
		if err != nil {
			return roll.List{}, err
		}
		if len(rows) > 0 {
			list.Sheets = append(list.Sheets, roll.Sheet{Name: name, Rows: rows})
		}
	}
	if len(list.Sheets) == 0 {
		return list, errEmpty
	}
	return list, nil
}

// looksSound looks at the packing of a workbook before anything is unpacked.
func looksSound(content []byte) error {
	z, err := zip.NewReader(bytes.NewReader(content), int64(len(content)))
	if err != nil {
		return errDamaged
	}
	var size uint64
	book := false
	for _, f := range z.File {
		if size += f.UncompressedSize64; size > mostUnpacked || f.UncompressedSize64 > mostUnpacked {
			return errUnpacks
		}
		book = book || strings.EqualFold(f.Name, "xl/workbook.xml")
	}
	if !book {
		return errNoBook
	}
	return nil
}
