package paper

// Papers writes the papers of a job: for the customer, the shop, or both.
func Papers(j Job, forWhom string) []Document {
	var papers []Document
	if forWhom != "shop" {
		papers = append(papers, Customer(j))
	}
	if forWhom != "customer" {
		papers = append(papers, Shop(j))
	}
	return papers
}
