package rules

// still tells whether a nuc's yard is on standstill. There no bees are put together that
// were apart, whatever else would be asked of them: common practice, no source.
func (n *nucCase) still() bool { return n.yard.yard.Standstill != nil }

// apart keeps the bees of a yard on standstill apart: nothing is united or shaken out
// there, whether the rules would ask for it or the keeper decided it.
func (n *nucCase) apart(f *Finding) {
	if n.still() && (f.Act == ActUnite || f.Act == ActShakeOut) {
		f.Act, f.Amount, f.Do = ActNone, 0, "Wait: nothing is united or shaken out on a standstill"
	}
}
