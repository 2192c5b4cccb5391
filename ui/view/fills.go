package view

func (p *sheet) record()    {}
func (p *sheet) late()      {}
func (p *sheet) batchRoom() {}
func (p *sheet) steps()     {}
func (p *sheet) bringList() {}
func (p *sheet) numbers()   {}
