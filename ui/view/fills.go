package view

func (p *sheet) numbers() {}
