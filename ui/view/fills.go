package view

func (p *sheet) bringList() {}
func (p *sheet) numbers()   {}
