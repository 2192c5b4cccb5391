package view

func (p *sheet) record()    {}
func (p *sheet) steps()     {}
func (p *sheet) bringList() {}
func (p *sheet) numbers()   {}
